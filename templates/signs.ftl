<#-- Signs for what is done with printed sheets, on a field of 13.6 by 10; w: width in mm. -->

<#macro sign w><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 13.6 10" width="${w}mm" height="${w * 10 / 13.6}mm"><g fill="none" stroke="black" stroke-width="0.5" data-save="stroke-width:0.32"><#nested/></g></svg></#macro>

<#macro print w><@sign w=w><path d="M0.8 1.2L12.8 1.2L12.8 8.8L0.8 8.8Z"/><path d="M6.8 0.6L6.8 9.4" stroke-dasharray="1.2 0.7"/><path d="M2 3.2L5.4 3.2M2 5L5.4 5M2 6.8L4.4 6.8"/><path d="M8.2 3.2L11.6 3.2M8.2 5L11.6 5M8.2 6.8L10.6 6.8"/></@sign></#macro>
<#macro fold w><@sign w=w><path d="M6.8 2.2L1.2 0.8L1.2 7.6L6.8 9.2L12.4 7.6L12.4 0.8L6.8 2.2"/><path d="M6.8 2.2L6.8 9.2" stroke-dasharray="1.2 0.7"/><path d="M3.6 4.2C4.4 3.6 5 3.6 5.6 4M10 4.2C9.2 3.6 8.6 3.6 8 4"/></@sign></#macro>
<#macro glue w><@sign w=w><path d="M0.8 1.2L7.6 1.2L7.6 8.8L0.8 8.8Z"/><path d="M0.8 4L3.6 1.2M0.8 7L6.6 1.2M2 8.8L7.6 3.2M5 8.8L7.6 6.2"/><path d="M9.4 4.2L12.2 4.2L12.2 8.8L9.4 8.8Z" fill="black" data-save="fill:white"/><path d="M9.8 4L9.8 1.2L11.8 1.2L11.8 4"/></@sign></#macro>
<#macro cut w><@sign w=w><path d="M0.4 5L4.8 5M8.6 5L13.2 5"/><circle cx="10.4" cy="2" r="1.5"/><circle cx="10.4" cy="8" r="1.5"/><path d="M9.2 2.9L2.2 7.6M9.2 7.1L2.2 2.4" stroke-width="0.8" data-save="stroke-width:0.5"/></@sign></#macro>
<#macro foldcard w><@sign w=w><path d="M6.8 3.6L1.6 2.4L1.6 7L6.8 8.4L12 7L12 2.4L6.8 3.6"/><path d="M6.8 3.6L6.8 8.4" stroke-dasharray="1.2 0.7"/><path d="M2.6 1.2C4 0.3 5.2 0.4 6.2 1.4M11 1.2C9.6 0.3 8.4 0.4 7.4 1.4"/></@sign></#macro>
<#macro both w><@sign w=w><path d="M0.8 0.9L8.2 0.9L8.2 6.3L0.8 6.3Z"/><path d="M2 2.6L7 2.6M2 4.4L5.4 4.4"/><path d="M3.2 7.6L3.2 9.1L10.6 9.1L10.6 3.7L9.4 3.7" stroke-dasharray="1.2 0.7"/><path d="M12.2 7.4C13.2 5.4 13 3 11 1.6"/><path d="M12.7 1.4L10.8 1.5L11.6 3.2"/></@sign></#macro>
<#macro light w><@sign w=w><circle cx="10.6" cy="3" r="1.5"/><path d="M10.6 0.9L10.6 0.2M10.6 5.1L10.6 5.8M12.7 3L13.4 3M12.1 1.5L12.6 1M12.1 4.5L12.6 5M9.1 1.5L8.6 1"/><path d="M0.8 1.4L7 1.4L7 9.2L0.8 9.2Z"/><circle cx="3.9" cy="5.3" r="1.9"/><path d="M2.7 5.3L5.1 5.3M3.9 4.1L3.9 6.5"/></@sign></#macro>
<#macro turn w><@sign w=w><path d="M1.6 4L6 4L6 9.2L1.6 9.2Z"/><path d="M7.6 4L12 4L12 9.2L7.6 9.2Z" stroke-dasharray="1.2 0.7"/><path d="M9.8 2.8C8.6 0.6 5.2 0.6 4 2.6"/><path d="M3.8 0.9L3.9 2.8L5.8 2.5"/></@sign></#macro>
<#macro flip w><@sign w=w><path d="M2 5.6L8 5.6L8 9.4L2 9.4Z"/><path d="M2 0.6L8 0.6L8 4.4L2 4.4Z" stroke-dasharray="1.2 0.7"/><path d="M9.4 7.6C11.8 6.6 11.8 3.4 9.6 2.4"/><path d="M11.3 2L9.4 2.3L10 4.2"/></@sign></#macro>
<#macro named key w><#if key == "print"><@print w=w/><#elseif key == "fold"><@fold w=w/><#elseif key == "foldcard"><@foldcard w=w/><#elseif key == "glue"><@glue w=w/><#elseif key == "cut"><@cut w=w/><#elseif key == "both"><@both w=w/><#elseif key == "light"><@light w=w/><#elseif key == "turn"><@turn w=w/><#else><@flip w=w/></#if></#macro>
<#macro sheet x=3.4><path d="M${x} 0.7L${x + 6.8} 0.7L${x + 6.8} 9.3L${x} 9.3Z"/><path d="M${x + 1.4} 4.6L${x + 5.4} 4.6M${x + 1.4} 6.1L${x + 5.4} 6.1M${x + 1.4} 7.6L${x + 4} 7.6"/></#macro>
<#macro staple w><@sign w=w><path d="M4.8 2L10.2 2L10.2 9.4L4.8 9.4" stroke-width="0.4"/><@sheet x=2.4/><path d="M3.2 2.7L5.2 1.5" stroke-width="0.9"/></@sign></#macro>
<#macro binder w><@sign w=w><@sheet x=4.6/><path d="M4.6 0.7L2.6 0.7L2.6 9.3L4.6 9.3"/><path d="M1.8 2.9L5.6 2.9M1.8 7.1L5.6 7.1" stroke-width="0.9"/></@sign></#macro>
<#macro loose w><@sign w=w><@sheet/><path d="M4.8 2.7L8.8 2.7"/></@sign></#macro>

<#-- The sign that goes with a word of the print plan. -->
<#macro after key w><#if key == "cards" || key == "fold"><@fold w=w/><#elseif key == "cut"><@cut w=w/><#elseif key == "staple" || key == "booklet" || key == "stack"><@staple w=w/><#elseif key == "binder"><@binder w=w/><#else><@loose w=w/></#if></#macro>
