<#-- A sign for each stop of the routine, on a field of 24 by 24; mm: its width. Drawn for this card alone: what the hands or the voice are at. -->

<#macro field mm><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 24 24" width="${mm}mm" height="${mm}mm"><g fill="none" stroke="black" stroke-width="1.5" stroke-linecap="round" stroke-linejoin="round"><#nested/></g></svg></#macro>
<#macro bunny transform><g transform="${transform}" fill="black" stroke="none"><path d="M5 8.4C4.4 5.6 5 2.4 6.2 0.9C6.8 0.3 7.5 0.7 7.5 1.6C7.4 4.2 6.8 6.6 6.6 8.2ZM7.4 7.8C7.9 5.4 8.9 2.5 9.9 0.9C10.5 0.2 11.3 0.6 11.2 1.6C10.9 4.2 9.6 6.6 8.4 8.2Z"/><path d="M0.3 12.4C0.2 11 2 8.9 4.6 8.2C6.6 7.6 8.4 8.4 8.8 9.6C11 5.6 14 4.4 18 4.4C24 4.4 28 9.2 28 14.4C28 17 27.4 18.4 26 18.9L6.2 18.9C5.4 18.9 5.3 17.6 6.4 17.2L9.4 16.8C8.2 16.3 7.4 15.6 6.8 14.9C5 15.4 2.9 15.4 1.7 14.5C0.9 14 0.4 13.2 0.3 12.4Z"/><circle cx="28.4" cy="14.6" r="1.5"/></g></#macro>

<#macro of no mm>
<@field mm=mm>
<#if no == 1><@bunny transform="translate(1.4 0.6) scale(0.71)"/><path d="M4 17.4C8 21.6 17 21.6 21.6 16.6M4 17.4L1.6 20.6"/>
<#elseif no == 2><@bunny transform="translate(1.4 4) scale(0.71)"/><path d="M1 20.2L23 20.2" stroke-width="2"/>
<#elseif no == 3><circle cx="8" cy="9" r="3.4" fill="black"/><path d="M1.8 21.6C2 16.6 4.4 14.4 8 14.4C11.6 14.4 14 16.6 14.2 21.6Z" fill="black"/><path d="M13.4 3L22.4 3L22.4 9.4L17.4 9.4L14.6 12L14.8 9.4L13.4 9.4Z"/>
<#elseif no == 4><path d="M10.6 16.6C5.8 13 5.2 4.4 7.6 1.8C10.6 1.6 12 9.6 11.6 14.6M13.4 16.6C18.2 13 18.8 4.4 16.4 1.8C13.4 1.6 12 9.6 12.4 14.6M6.6 22C7.4 18.4 9.4 16.4 12 16.4C14.6 16.4 16.6 18.4 17.4 22"/>
<#elseif no == 5><@bunny transform="translate(21.6 22.6) rotate(180) scale(0.64)"/><path d="M3.4 8.4C5 2.6 16 1.2 20 6.4M20.6 2.4L20.2 6.8L15.9 6"/>
<#elseif no == 6><path d="M1.4 12C5.4 5.6 18.6 5.6 22.6 12C18.6 18.4 5.4 18.4 1.4 12Z"/><circle cx="12" cy="12" r="4.2" fill="black"/><circle cx="10.6" cy="10.6" r="1.1" fill="white" stroke="none"/>
<#elseif no == 7><path d="M8.6 3L15.4 3L12 7Z" fill="black"/><path d="M12 7L12 10.4M12 10.4C10.6 12.6 8 12.4 7.2 10.8M12 10.4C13.4 12.6 16 12.4 16.8 10.8"/><path d="M3.6 22C2.6 18 4 15.4 6.2 15.4C8.4 15.4 9.8 18 8.8 22ZM15.2 22C14.2 18 15.6 15.4 17.8 15.4C20 15.4 21.4 18 20.4 22Z"/>
<#elseif no == 8><path d="M2 7C5 3.6 19 3.6 22 7"/><path d="M7.6 6.2L12 6.2L12 14C12 15 7.6 15 7.6 14ZM12 6.2L16.4 6.2L16.4 14C16.4 15 12 15 12 14Z"/><path d="M8.6 21.4L8.6 17.4L12 17.4L12 21.4M12 17.4L15.4 17.4L15.4 21.4"/>
<#elseif no == 9><path d="M7 22C5.4 15.4 7.6 12 12 12C16.4 12 18.6 15.4 17 22"/><ellipse cx="5.2" cy="9" rx="1.5" ry="2.6" fill="black"/><ellipse cx="9.7" cy="5.4" rx="1.5" ry="2.8" fill="black"/><ellipse cx="14.3" cy="5.4" rx="1.5" ry="2.8" fill="black"/><ellipse cx="18.8" cy="9" rx="1.5" ry="2.6" fill="black"/><ellipse cx="21" cy="15.6" rx="1.2" ry="2.2" fill="black"/>
<#elseif no == 10><path d="M1.6 6C8 2.4 17 3.2 22.4 9"/><path d="M3 20.8L3 14.4L17.4 11.6C19 11.4 19.4 13.4 17.8 13.8L12.8 15L20.4 14.6C22 14.6 22 16.8 20.4 17L9 20.8Z" fill="black" stroke-width="0.8"/>
<#elseif no == 11><path d="M8.4 22C7.4 17.6 7 11 8 8.6C9.4 6.4 14.6 6.4 16 8.6C17 11 16.6 17.6 15.6 22"/><ellipse cx="6.6" cy="4.6" rx="1.3" ry="2.3" fill="black"/><ellipse cx="10.2" cy="3.4" rx="1.3" ry="2.3" fill="black"/><ellipse cx="13.8" cy="3.4" rx="1.3" ry="2.3" fill="black"/><ellipse cx="17.4" cy="4.6" rx="1.3" ry="2.3" fill="black"/>
<#elseif no == 12><circle cx="6" cy="12" r="4.2"/><path d="M18 6.4C20 9.8 20 14.2 18 17.6C16 14.2 16 9.8 18 6.4Z"/><path d="M12 4L12 20" stroke-dasharray="0.1 3"/>
<#elseif no == 13><path d="M1.6 20.6L1.6 12C4 5.4 13 4.6 15.8 11.6C16.6 14.8 16.4 18 15.6 20.6"/><circle cx="19" cy="9.6" r="3.8" fill="black"/>
<#elseif no == 14><@bunny transform="translate(2.8 8.2) scale(0.64)"/><path d="M20.6 7.6C19 1.8 8 0.6 4 5.6M3.2 1.6L3.7 6L8.1 5.1"/><path d="M1 22L23 22" stroke-width="2"/>
<#elseif no == 15><path d="M1.4 20.6C7 16.4 17 16.4 22.6 20.6"/><path d="M4.6 17.4L3 13M8.2 16L7.2 11.6M12 15.4L12 11M15.8 16L16.8 11.6M19.4 17.4L21 13" /><path d="M4 6.2L18 6.2M14.6 2.8L18.4 6.2L14.6 9.6"/>
<#else><path d="M2 3L22 3L22 15L12 15L6.6 20.8L7 15L2 15Z"/><path d="M6 7L18 7M6 11L14 11"/>
</#if>
</@field>
</#macro>
